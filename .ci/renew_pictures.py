"""Takes the pictures anew that the pages of the window are compared with: python .ci/renew_pictures.py

To be run when a page was meant to change, and by nobody else. Look at what git says has changed, picture by
picture, before it is committed: from then on it is what the tests hold to be right.
"""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path
from typing import Final

ROOT: Final = Path(__file__).resolve().parent.parent
FOLDER: Final = ROOT / "tests" / "desk" / "tour" / "pictures"
TESTS: Final = "tests/desk/tour/test_pictures.py"
RENEW: Final = "RAFTWEEK_RENEW_PICTURES"


def main() -> int:
    """Take every picture anew, and drop those that no page has any more."""
    for path in FOLDER.glob("*.webp"):
        path.unlink()
    environment = {**os.environ, RENEW: "1", "QT_QPA_PLATFORM": "offscreen"}
    command = [sys.executable, "-m", "pytest", TESTS, "-q", "-p", "no:cacheprovider"]
    done = subprocess.run(command, cwd=ROOT, env=environment, check=False)
    print(f"{len(list(FOLDER.glob('*.webp')))} pictures in {FOLDER.relative_to(ROOT)}; now look at them.")
    return done.returncode


if __name__ == "__main__":
    sys.exit(main())
