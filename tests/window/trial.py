"""What one check works with."""

import os
import shutil
import tempfile

import places
from desk import Failed, wait_for
from program import Home, Program

UNTITLED = "Untitled design – Vatsketch"
UNSAVED = "• "
# The user that owns nothing, by number: the same on every Linux.
NOBODY = 65534


def must(holds, words):
    if not holds:
        raise Failed(words)


class Trial:
    """A fresh home, and programs that are closed at the end of the check."""

    def __init__(self, desk, program):
        self.desk = desk
        self.path = program
        self.home = Home()
        self.programs = []

    def start(self, *arguments, **environment):
        program = Program(self.path, self.home, *arguments, **environment)
        self.programs.append(program)
        return program

    def close(self):
        for program in self.programs:
            program.close()
        os.chmod(self.home.path, 0o755)
        self.home.folder.cleanup()

    def start_as_ordinary_user(self):
        """Starts it as somebody whom the disk may refuse something, since root may write anywhere."""
        if os.geteuid() != 0:
            return self.start()
        self.home.give_to(NOBODY)
        with tempfile.TemporaryDirectory() as folder:
            os.chmod(folder, 0o755)
            copy = shutil.copy(self.path, folder)
            before = ("setpriv", f"--reuid={NOBODY}", f"--regid={NOBODY}", "--clear-groups")
            program = Program(copy, self.home, before=before)
            self.programs.append(program)
            # Once its window is there it is loaded, and the copy may go.
            program.window()
        return program

    def type_milk(self, hand, litres):
        hand.click(places.MILK_BOX)
        hand.keys(*places.ALL)
        hand.type(litres)
        hand.keys(*places.ENTER)

    def asked(self, hand, words):
        """Waits until a question stands in front of the window, and keeps a picture of it."""
        wait_for(f"the question: {words}", lambda: hand.brightness(places.CORNER) < places.BRIGHT)
        self.desk.picture(words.replace(" ", "-"))

    def answered(self, hand):
        """Waits until no question stands in front of the window any more."""
        wait_for("the question to go", lambda: hand.brightness(places.CORNER) > places.BRIGHT)

    def told(self, hand, words):
        """Waits until a bar in the window tells something, and keeps a picture of it."""
        wait_for(f"the bar: {words}", lambda: hand.brightness(places.BAR) < places.PAPER)
        self.desk.picture(words.replace(" ", "-"))

    def type_path(self, hand, path):
        """Answers the question for a path; there is no file dialog, since there is no session bus."""
        self.asked(hand, "what path")
        hand.keys(*places.ALL)
        hand.type(path)
        hand.keys(*places.ENTER)

    def save(self, program, hand, path):
        hand.keys(*places.SAVE)
        self.type_path(hand, path)
        wait_for(f"the file {path}", lambda: os.path.exists(path))
        program.has_name(UNTITLED)

    def copies(self, title="first.vat.ron"):
        """Returns the recovery copies that are there."""
        return [path for path in self.home.below(".local", "state", "vatsketch") if path.endswith(title)]

    @staticmethod
    def text(path):
        with open(path, encoding="utf-8") as file:
            return file.read()

    def holds(self, path, words):
        must(words in self.text(path), f"{path} does not hold “{words}”")
