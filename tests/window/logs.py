"""Writing down what really happened. Each function is one check; its first line says what must hold."""

import os

import places
from desk import wait_for
from trial import must


def begun(trial):
    """Saves a design and begins a batch of it; returns the program, its window and the file of the log."""
    program = trial.start()
    hand = program.window()
    trial.type_milk(hand, "7")
    trial.save(program, hand, trial.home.file("kept.vat.ron"))
    log = trial.home.file("kept.log.ron")
    hand.click(places.PAGE_LOG)
    must(not os.path.exists(log), "an empty log is no file")
    hand.click(places.BEGIN_BATCH)
    wait_for("the log", lambda: os.path.exists(log))
    return program, hand, log


def log(trial):
    """A batch that is begun is in the file beside the design at once."""
    _, _, path = begun(trial)
    wait_for("the batch in the log", lambda: "batch(" in trial.text(path))
    trial.desk.picture("batch-begun")


def kitchen_of_empty_log(trial):
    """A log without measurements is said to show nothing of the kitchen; the window goes on."""
    program, hand, _ = begun(trial)
    hand.click(places.YOUR_KITCHEN)
    hand.click(places.LEARN)
    trial.desk.picture("kitchen-of-an-empty-log")
    must(program.runs(), "the program ended")


CHECKS = [log, kitchen_of_empty_log]
