"""Lets a file fall into a window as a file manager does: the drag-and-drop protocol of X11, version 5, from its source's side."""

import pathlib
import select
import time

from Xlib import X, Xatom, display
from Xlib.protocol import event

from desk import Failed

VERSION = 5
KIND = "text/uri-list"


class Source:
    """What is dragged: one file, held over one window and let fall there."""

    def __init__(self, window, path):
        self.display = display.Display()
        self.target = self.display.create_resource_object("window", int(window))
        self.own = self.display.screen().root.create_window(0, 0, 1, 1, 0, X.CopyFromParent)
        self.words = (pathlib.Path(path).as_uri() + "\r\n").encode()
        self.own.set_selection_owner(self.atom("XdndSelection"), X.CurrentTime)

    def atom(self, name):
        return self.display.intern_atom(name)

    def tell(self, name, *numbers):
        """Sends the window one message of the protocol."""
        told = [self.own.id, *numbers]
        message = event.ClientMessage(
            window=self.target, client_type=self.atom(name), data=(32, (told + [0] * 5)[:5])
        )
        self.target.send_event(message)
        self.display.flush()

    def hand_over(self, request):
        """Gives the window the address of the file, where it asked for it."""
        request.requestor.change_property(request.property, request.target, 8, self.words)
        request.requestor.send_event(
            event.SelectionNotify(
                time=request.time,
                requestor=request.requestor,
                selection=request.selection,
                target=request.target,
                property=request.property,
            )
        )
        self.display.flush()

    def answered(self, name, seconds=10.0):
        """Waits for a message of the window, and gives it the address as often as it asks."""
        end = time.monotonic() + seconds
        while time.monotonic() < end:
            if not self.display.pending_events():
                select.select([self.display], [], [], 0.1)
                continue
            came = self.display.next_event()
            if came.type == X.SelectionRequest:
                self.hand_over(came)
            elif came.type == X.ClientMessage and came.client_type == self.atom(name):
                return came
        raise Failed(f"the window did not answer with {name}")


def drop(window, path, place):
    """Lets a file fall into a window at a place of its own."""
    source = Source(window, path)
    if source.target.get_full_property(source.atom("XdndAware"), Xatom.ATOM) is None:
        raise Failed("the window takes nothing that is dropped")
    corner = source.target.translate_coords(source.display.screen().root, 0, 0)
    # The place on the screen is told; the corner is where the screen lies, seen from the window.
    x, y = place[0] - corner.x, place[1] - corner.y
    source.tell("XdndEnter", VERSION << 24, source.atom(KIND))
    source.tell("XdndPosition", 0, x << 16 | y, X.CurrentTime, source.atom("XdndActionCopy"))
    taken = source.answered("XdndStatus").data[1][1] & 1
    if not taken:
        raise Failed("the window refuses what is held over it")
    source.tell("XdndDrop", 0, X.CurrentTime)
    source.answered("XdndFinished")
    source.display.close()
