"""Writing down what really happened. Each function is one check; its first line says what must hold."""

import os

import places
from desk import wait_for
from trial import must

def log(trial):
    """A batch that is begun is in the file beside the design at once."""
    program = trial.start()
    hand = program.window()
    path = trial.home.file("kept.vat.ron")
    trial.type_milk(hand, "7")
    trial.save(program, hand, path)
    beside = trial.home.file("kept.log.ron")
    hand.click(places.PAGE_LOG)
    must(not os.path.exists(beside), "an empty log is no file")
    hand.click(places.BEGIN_BATCH)
    wait_for("the log", lambda: os.path.exists(beside) and "batch(" in trial.text(beside))
    trial.desk.picture("batch-begun")


def kitchen_of_empty_log(trial):
    """A log without measurements is said to show nothing of the kitchen; the window goes on."""
    program = trial.start()
    hand = program.window()
    path = trial.home.file("kept.vat.ron")
    trial.type_milk(hand, "7")
    trial.save(program, hand, path)
    hand.click(places.PAGE_LOG)
    hand.click(places.BEGIN_BATCH)
    wait_for("the log", lambda: os.path.exists(trial.home.file("kept.log.ron")))
    hand.click(places.YOUR_KITCHEN)
    hand.click(places.LEARN)
    trial.desk.picture("kitchen-of-an-empty-log")
    must(program.runs(), "the program ended")


CHECKS = [log, kitchen_of_empty_log]
