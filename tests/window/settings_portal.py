"""The settings portal of a desktop that wishes to be dark, on a session bus of its own."""

import os
import signal
import subprocess
import sys

INTERFACE = "org.freedesktop.portal.Settings"
# XDG Desktop Portal documentation, org.freedesktop.appearance: 1 is the wish for dark colours.
DARK = 1
DESCRIPTION = f"""<node><interface name='{INTERFACE}'><method name='ReadOne'>
<arg type='s' direction='in'/><arg type='s' direction='in'/><arg type='v' direction='out'/></method></interface></node>"""


class DarkDesktop:
    """A bus whose portal wishes for dark colours; its address while it is open."""

    def __enter__(self):
        self.bus = subprocess.Popen(
            ["dbus-daemon", "--session", "--nofork", "--print-address"], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True
        )
        address = self.bus.stdout.readline().strip()
        environment = {**os.environ, "DBUS_SESSION_BUS_ADDRESS": address}
        self.portal = subprocess.Popen([sys.executable, "-B", __file__], env=environment, stdout=subprocess.PIPE, text=True)
        self.portal.stdout.readline()
        return address

    def __exit__(self, *_):
        for process in (self.portal, self.bus):
            process.send_signal(signal.SIGTERM)
            process.wait()


def serve():
    """Answers until it is ended."""
    from gi.repository import Gio, GLib

    def answer(_bus, _sender, _path, _interface, _method, wanted, call):
        namespace, key = wanted.unpack()
        if (namespace, key) == ("org.freedesktop.appearance", "color-scheme"):
            call.return_value(GLib.Variant("(v)", (GLib.Variant("u", DARK),)))
        else:
            call.return_dbus_error("org.freedesktop.portal.Error.NotFound", "no such setting")

    bus = Gio.bus_get_sync(Gio.BusType.SESSION)
    node = Gio.DBusNodeInfo.new_for_xml(DESCRIPTION)
    bus.register_object("/org/freedesktop/portal/desktop", node.interfaces[0], answer)
    Gio.bus_own_name_on_connection(
        bus, "org.freedesktop.portal.Desktop", Gio.BusNameOwnerFlags.NONE, lambda *_: print("here", flush=True), None
    )
    GLib.MainLoop().run()


if __name__ == "__main__":
    serve()
