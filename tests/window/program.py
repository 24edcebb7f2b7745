"""The program, run as a maker runs it who has no file of it yet."""

import os
import re
import shutil
import signal
import subprocess
import tempfile

from desk import Failed, Hand, said, wait_for

# Ends the title of a window once it is drawn; before, it has the name alone.
TITLE = " – Vatsketch"
FILE = re.compile(r" \([^()]+\) – Vatsketch$")
# What would let the program see the real home, desktop or session bus of whoever runs the checks.
FOREIGN = ("XDG_", "DBUS_", "WAYLAND_", "LIBGL_", "WINIT_", "MESA_", "EGL_", "GALLIUM_")


# Where it is kept that the welcome of the first start was shown.
WELCOMED = (".config", "vatsketch", "welcomed.ron")


class Home:
    """A home folder that is empty but for one note: its maker was welcomed before, so no welcome stands in front of the window."""

    def __init__(self):
        self.folder = tempfile.TemporaryDirectory(prefix="vatsketch-home-")
        self.path = self.folder.name
        os.chmod(self.path, 0o755)
        os.makedirs(os.path.dirname(self.file(*WELCOMED)))
        with open(self.file(*WELCOMED), "w", encoding="utf-8") as file:
            file.write("(once: true)")

    def never_started(self):
        """Makes it the home of somebody who never started the program."""
        shutil.rmtree(self.file(WELCOMED[0]))

    def give_to(self, user):
        """Gives it to a user, with all that is in it."""
        os.chown(self.path, user, user)
        for folder, folders, files in os.walk(self.path):
            for name in folders + files:
                os.chown(os.path.join(folder, name), user, user)

    def file(self, *names):
        return os.path.join(self.path, *names)

    def below(self, *names):
        """Returns the files below a folder, or none when it is not there."""
        return sorted(os.path.join(folder, name) for folder, _, files in os.walk(self.file(*names)) for name in files)

    def environment(self, **more):
        """Returns variables of a session without a bus: no file dialog can be had."""
        kept = {name: value for name, value in os.environ.items() if not name.startswith(FOREIGN)}
        kept.update(HOME=self.path, XDG_RUNTIME_DIR=self.path, DBUS_SESSION_BUS_ADDRESS=f"unix:path={self.path}/none", LANG="C.UTF-8")
        kept.update(more)
        return {name: value for name, value in kept.items() if value is not None}


class Program:
    """One running program."""

    def __init__(self, program, home, *arguments, before=(), **environment):
        self.output = tempfile.TemporaryFile(mode="w+")
        self.process = subprocess.Popen(
            [*before, program, *arguments],
            env=home.environment(**environment),
            cwd=home.path,
            stdin=subprocess.DEVNULL,
            stdout=self.output,
            stderr=subprocess.STDOUT,
        )

    def window(self):
        """Returns a hand in the window, once it is there and named."""
        wait_for("a window", lambda: self.process.poll() is not None or self.names())
        if self.process.poll() is not None:
            raise Failed(f"it ended with exit code {self.process.returncode}: {self.words()}")
        return self.hand()

    def windows(self):
        return said("xdotool", "search", "--onlyvisible", "--pid", str(self.process.pid)).split()

    def hand(self):
        hand = Hand(self.windows()[0])
        hand.front()
        return hand

    def names(self):
        """Returns the titles of its windows as the desktop shows them."""
        titles = (said("xdotool", "getwindowname", window) for window in self.windows())
        # The name of the file stands in brackets behind the title of the design.
        return [FILE.sub(TITLE, title) for title in titles if TITLE in title]

    def name(self):
        return (self.names() or [""])[0]

    def has_name(self, words, seconds=20.0):
        """Waits until the title of the window is this."""
        try:
            wait_for("the title", lambda: self.name() == words, seconds)
        except Failed:
            raise Failed(f"the window is called “{self.name()}” and not “{words}”") from None

    def runs(self):
        return self.process.poll() is None

    def ended(self, seconds=20.0):
        """Returns its exit code, once it has ended by itself."""
        try:
            return self.process.wait(seconds)
        except subprocess.TimeoutExpired:
            raise Failed(f"it still runs after {seconds:.0f} s") from None

    def words(self):
        """Returns what it has printed."""
        self.output.seek(0)
        return self.output.read().strip()

    def kill(self):
        self.process.send_signal(signal.SIGKILL)
        self.process.wait()

    def close(self):
        if self.runs():
            self.kill()
        self.output.close()
