"""Runs the program, whose every answer is JSON."""

import json
import subprocess
from pathlib import Path


class Program:
    """The command line that is checked."""

    def __init__(self, path):
        self.path = path
        self.example = str(Path(__file__).parents[2] / "resources/examples/first-vat.vat.ron")

    def run(self, *arguments):
        """Returns what was said of a failure, empty where there was none, and what was written as JSON."""
        done = subprocess.run([self.path, *arguments, "--json"], capture_output=True, text=True, check=False)
        if done.returncode > 1:
            raise RuntimeError(f"{arguments} ends with {done.returncode}: {done.stderr}")
        return done.stderr if done.returncode else "", json.loads(done.stdout or "{}")

    def stage(self, name, choices, parameters=None, fine=False):
        """Calculates one stage alone from choices and constants by their keys."""
        arguments = ["stage", name, *(["--fine"] if fine else [])]
        for key, value in choices.items():
            arguments += ["--set", f"{key}={value}"]
        for key, value in (parameters or {}).items():
            arguments += ["--parameter", f"{key}={value!r}"]
        return self.run(*arguments)

    def ranges(self):
        """Returns the range of every number that can be set, by list and key, as `inputs` tells it."""
        _, lists = self.run("inputs")
        return {
            name: {row["key"]: (row["least"], row["most"]) for row in rows if row.get("least") is not None}
            for name, rows in lists.items()
            if isinstance(rows, list)
        }
