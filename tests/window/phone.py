#!/usr/bin/env python3
"""Checks the plan for a phone in a real browser: boxes stay ticked, numbers stay written, a timer rings, and nothing is loaded.

Prints a line for each check and ends with 1 if one failed. It needs a browser that can be told to show no window:

    apt-get install chromium
    python3 tests/window/phone.py target/release/vatsketch
"""

import argparse
import re
import subprocess
import sys
import tempfile
from pathlib import Path

# What a hand would do, and how the page looks afterwards.
HAND = """
<script>
addEventListener("load", () => {
  const box = document.querySelector("input[type=checkbox]"), blank = document.querySelector("input[type=text]");
  box.click();
  blank.value = "17.5"; blank.dispatchEvent(new Event("input", { bubbles: true }));
  const timer = document.querySelector("button[data-seconds]");
  timer.dataset.seconds = "1"; timer.click();
  setTimeout(() => {
    document.body.dataset.timer = timer.textContent;
    timer.click();
    document.body.dataset.stopped = timer.textContent;
    document.body.dataset.loaded = performance.getEntriesByType("resource").length;
  }, 2500);
});
</script>
"""
LOOK = """
<script>
addEventListener("load", () => {
  document.body.dataset.box = document.querySelector("input[type=checkbox]").checked;
  document.body.dataset.blank = document.querySelector("input[type=text]").value;
});
</script>
"""


def shown(page, profile):
    """Returns the page as the browser has it five seconds later."""
    command = ["chromium", "--headless", "--no-sandbox", "--disable-gpu", f"--user-data-dir={profile}"]
    command += ["--virtual-time-budget=5000", "--dump-dom", page.as_uri()]
    return subprocess.run(command, capture_output=True, text=True, timeout=120, check=True).stdout


def main():
    """Makes a page, uses it, and looks at it again."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("program")
    program = Path(parser.parse_args().program).resolve()
    with tempfile.TemporaryDirectory() as folder:
        folder, failed = Path(folder), False
        design, page = folder / "design.vat.ron", folder / "plan.html"
        example = subprocess.run([program, "example", "first-vat"], capture_output=True, check=True)
        design.write_bytes(example.stdout)
        subprocess.run([program, "export", design, "--to", page, "--start", "2031-05-09T17:30"], check=True, capture_output=True)
        plain = page.read_text(encoding="utf-8")

        def look(name, held):
            nonlocal failed
            failed = failed or not held
            print(f"{'ok' if held else 'FAILED'} {name}", flush=True)

        def used(script):
            # Scripts are allowed by the page itself, and stand at its end.
            page.write_text(plain.replace("</body>", script + "</body>"), encoding="utf-8")
            return dict(re.findall(r'data-(\w+)="([^"]*)"', re.search(r"<body[^>]*>", shown(page, folder / "profile"))[0]))

        first = used(HAND)
        look("a timer that has run out says so", "Time is up" in first.get("timer", ""))
        look("a timer that is pressed stops", first.get("stopped", "").startswith("Start a timer"))
        look("nothing is loaded from elsewhere", first.get("loaded") == "0")
        again = used(LOOK)
        look("a box stays ticked", again.get("box") == "true")
        look("a number stays written", again.get("blank") == "17.5")
    sys.exit(1 if failed else 0)


if __name__ == "__main__":
    main()
