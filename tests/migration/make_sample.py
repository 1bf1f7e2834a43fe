"""Makes the kept sample file of the current version: python -m tests.migration.make_sample

Run once, when a version of the tables is new; files of earlier versions are never made again.
"""

from pathlib import Path

from planner.store.acts import ActKind
from planner.store.migrations.runner import CURRENT_VERSION
from planner.store.store import FarmStore
from tests.store.sample import FIRST, NOON, altered, change_set, holds_of, sample_farm

HERE = Path(__file__).parent


def sample_path(version: int) -> Path:
    """Return where the sample file of a version is."""
    return HERE / f"sample-version-{version}.raftweek"


def main() -> None:
    """Write the file, with one act done and one undone."""
    farm = sample_farm()
    with FarmStore.create(sample_path(CURRENT_VERSION), farm, holds_of(farm)) as store:
        noted = change_set(altered(FIRST, notes="kept"), title="Note")
        store.apply(noted, [], kind=ActKind.DO, at=NOON)
        store.apply(noted.turned(), [], kind=ActKind.UNDO, at=NOON)


if __name__ == "__main__":
    main()
