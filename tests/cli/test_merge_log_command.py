"""The command `merge-log` takes another copy's log into a farm file, once, and tells what differs."""

from planner.bootstrap import Means
from planner.cli import main
from planner.store.store import FarmStore
from planner.store.text.writer import write_farm_text

NOTE = '\n[[log]]\ncode = "{code}"\nwhat = "note"\non = 2027-03-01\nnotes = "{notes}"\n'


def copies(root, tmp_path):
    means = Means()
    farm = means.read(root / "sample_data" / "backyard.toml").farm
    text = write_farm_text(farm)
    ours, theirs = tmp_path / "ours.raftweek", tmp_path / "theirs.toml"
    mine = tmp_path / "ours.toml"
    common = "".join(NOTE.format(code=f"N-{number}", notes="same") for number in range(10))
    mine.write_text(text + common + NOTE.format(code="X", notes="mine"), encoding="utf-8")
    theirs.write_text(
        text + common + NOTE.format(code="X", notes="theirs") + NOTE.format(code="Y", notes="new"),
        encoding="utf-8",
    )
    farm = means.read(mine).farm
    FarmStore.create(ours, farm, means.holds(farm)).close()
    return ours, theirs


def log_of(path):
    with FarmStore.open(path) as store:
        return [(entry.code, entry.notes) for entry in store.load().log_entries]


def test_that_what_is_new_comes_in_once_and_what_differs_is_told(root, tmp_path, capsys):
    ours, theirs = copies(root, tmp_path)
    assert main(["merge-log", str(ours), str(theirs)]) == 1
    said = capsys.readouterr()
    assert "1 entry taken in, 10 were there already" in said.out
    assert 'left out: "X" (note, 2027-03-01) differs from ours: "X"' in said.err
    assert log_of(ours)[-2:] == [("X", "mine"), ("Y", "new")]
    main(["merge-log", str(ours), str(theirs)])
    assert len(log_of(ours)) == 12


def test_that_theirs_may_correct_ours(root, tmp_path, capsys):
    ours, theirs = copies(root, tmp_path)
    assert main(["merge-log", str(ours), str(theirs), "--clashes", "theirs", "--dry-run"]) == 0
    assert "2 entries would be taken in" in capsys.readouterr().out
    assert len(log_of(ours)) == 11
    assert main(["merge-log", str(ours), str(theirs), "--clashes", "theirs"]) == 0
    assert log_of(ours)[-3:] == [("X", "mine"), ("X (theirs)", "theirs"), ("Y", "new")]
