"""Where things are in the window when it is 1280 by 800, and the keys that are pressed: all that must follow when the window is laid out anew.

What can be reached by a key is reached by it. In a question that stands in front of the window, the first button has the focus.
"""

SIZE = (1280, 800)

# A corner where nothing stands: by day it is bright, and dark while a question stands in front of the window.
CORNER = (1270, 790)
BRIGHT = 0.7
# Darker than this in dark colours, brighter than this where the colours are light.
DARK = 0.3

# Where a bar begins that tells something, and where nothing stands otherwise: darker than this then.
BAR = (1274, 56)
PAPER = 0.93

# Where nothing is pressed by chance.
MIDDLE = (640, 400)

TITLE_BOX = (500, 24)
PAGE_PLAN = (1151, 24)
PAGE_LOG = (1187, 24)
PART_PAPER = (247, 66)
COPY_AS_TEXT = (622, 125)

# On the page Design, station Milk.
MILK_RAIL_LEFT = (30, 262)
MILK_RAIL_HANDLE = (170, 262)
MILK_RAIL_RIGHT = (300, 262)
MILK_BOX = (254, 230)

# On the page Log: without a batch, and with one.
BEGIN_BATCH = (100, 180)
YOUR_KITCHEN = (70, 106)
LEARN = (400, 315)

SAVE = ("ctrl+s",)
SAVE_AS = ("ctrl+shift+s",)
UNDO = ("ctrl+z",)
QUIT = ("ctrl+q",)
ALL = ("ctrl+a",)
ENTER = ("Return",)
GIVE_UP = ("Escape",)
FIRST_BUTTON = ("space",)
SECOND_BUTTON = ("Tab", "space")
# In the welcome, behind the milk in the shop, an empty design and the guide.
FIRST_EXAMPLE = ("Tab", "Tab", "Tab", "space")
