"""A screen without a monitor, with a small window manager, a mouse and a keyboard."""

import os
import subprocess
import time


class Failed(Exception):
    """What a check expected did not come."""


def wait_for(what, probe, seconds=20.0):
    """Returns the first answer of `probe` that is true; fails with `what` when none comes in time."""
    end = time.monotonic() + seconds
    while True:
        answer = probe()
        if answer:
            return answer
        if time.monotonic() > end:
            raise Failed(f"waited {seconds:.0f} s for {what}")
        time.sleep(0.1)


def said(*command):
    """Returns what a command prints, or nothing when it fails."""
    run = subprocess.run(command, capture_output=True, text=True, check=False, timeout=30)
    return run.stdout.strip() if run.returncode == 0 else ""


class Desk:
    """The screen; larger than the window, so that frames do not push it off."""

    def __init__(self, pictures):
        self.pictures = pictures
        self.made = 0
        read, write = os.pipe()
        self.server = subprocess.Popen(
            ["Xvfb", "-displayfd", str(write), "-screen", "0", "2800x1800x24", "-nolisten", "tcp"],
            pass_fds=[write],
            stderr=subprocess.DEVNULL,
        )
        os.close(write)
        with os.fdopen(read) as display:
            self.display = f":{display.readline().strip()}"
        os.environ["DISPLAY"] = self.display
        self.manager = subprocess.Popen(["openbox"], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        wait_for("the window manager", lambda: "window id" in said("xprop", "-root", "_NET_SUPPORTING_WM_CHECK"))

    def close(self):
        for process in (self.manager, self.server):
            process.terminate()
            process.wait()

    def picture(self, name):
        """Keeps a picture of the whole screen."""
        self.made += 1
        path = os.path.join(self.pictures, f"{self.made:02}-{name}.png")
        subprocess.run(["import", "-window", "root", path], check=False, stderr=subprocess.DEVNULL)

    @staticmethod
    def clipboard():
        """Returns what another program reads from the clipboard."""
        return said("xclip", "-selection", "clipboard", "-out")

    @staticmethod
    def put_on_clipboard(text):
        """Has another program hold a text for whoever pastes it."""
        subprocess.run(
            ["xclip", "-selection", "clipboard", "-in"],
            input=text,
            text=True,
            check=True,
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )


class Compositor:
    """A screen of the other kind, Wayland, that shows nothing to anybody."""

    def __init__(self, home):
        self.folder = home.path
        self.process = None

    def __enter__(self):
        name = "checked-screen"
        os.chmod(self.folder, 0o700)
        self.process = subprocess.Popen(
            ["weston", "--backend=headless-backend.so", f"--socket={name}"],
            env={**os.environ, "XDG_RUNTIME_DIR": self.folder, "HOME": self.folder},
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )
        wait_for("the Wayland screen", lambda: os.path.exists(os.path.join(self.folder, name)))
        return name

    def __exit__(self, *_):
        self.process.terminate()
        self.process.wait()


class Hand:
    """Mouse and keyboard in one window, in the hands of somebody who waits until what they did is seen."""

    pause = 0.25

    def __init__(self, window):
        self.window = window

    def _do(self, *arguments):
        subprocess.run(["xdotool", *map(str, arguments)], check=True, stdout=subprocess.DEVNULL)
        time.sleep(Hand.pause)

    def brightness(self, place):
        """Returns the brightness of one point of the window, from 0 to 1."""
        x, y = place
        return float(said("import", "-silent", "-window", self.window, "-crop", f"1x1+{x}+{y}", "-format", "%[fx:mean]", "info:") or 0)

    def front(self):
        self._do("windowactivate", "--sync", self.window)

    def click(self, place):
        self._do("mousemove", "--window", self.window, *place)
        self._do("click", 1)

    def drag(self, start, end, steps=8):
        self._do("mousemove", "--window", self.window, *start)
        self._do("mousedown", 1)
        for step in range(1, steps + 1):
            self._do("mousemove", "--window", self.window, *(a + (b - a) * step // steps for a, b in zip(start, end)))
        self._do("mouseup", 1)

    def close(self):
        """Asks the window manager to close the window, as its button does."""
        self._do("windowactivate", "--sync", self.window, "key", "alt+F4")

    def keys(self, *keys):
        for key in keys:
            self._do("key", "--clearmodifiers", key)

    def type(self, text):
        self._do("type", "--clearmodifiers", "--delay", 30, text)
