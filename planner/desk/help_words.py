"""What the program says of itself; translated where it is shown."""

from __future__ import annotations

from typing import Final

ABOUT: Final = (
    "Raftweek plans small coupled aquaponic loops: what to sow, move and pick each week, so that the "
    "harvest is steady and what the crops take up stays matched to what the fish are fed."
)

PLANNING_AID: Final = (
    "The numbers are planning aids. Test the water, look at the fish. No yield is promised, and nothing "
    "here is medical, legal or engineering advice."
)

PRIVACY: Final = (
    "What you enter stays on this computer, in the file you see in the status bar. What the weeks showed "
    "last is kept beside it in the folder for temporary files of your user, so that the next start is quick."
)
