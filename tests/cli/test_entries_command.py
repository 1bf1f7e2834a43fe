"""The command `entries` writes own entries of the catalogue and takes some in."""


def own_farm(yard, tmp_path):
    path = tmp_path / "own.toml"
    crop = '\n[[crop]]\nkey = "basil-fine"\nlike = "basil"\nname = "Fine basil"\nbed_days = 26\n'
    path.write_text(yard.read_text(encoding="utf-8") + crop, encoding="utf-8")
    return path


def test_that_entries_go_from_one_farm_to_another_and_come_out_the_same(run, yard, tmp_path):
    library, other = tmp_path / "library.toml", tmp_path / "other.toml"
    assert run("entries", own_farm(yard, tmp_path), "--write", library).code == 0
    said = run("entries", yard, "--take", library, "--adopt", other)
    assert (said.code, said.out.strip()) == (0, f"{other}: 1 entry added, 0 replaced")
    assert run("entries", other).out == library.read_text(encoding="utf-8")
    again = tmp_path / "again.toml"
    said = run("entries", other, "--take", library, "--adopt", again)
    assert said.out.strip() == f"{again}: 0 entries added, 0 replaced"


def test_that_an_entry_like_nothing_known_is_a_fault(run, yard, tmp_path):
    library = tmp_path / "library.toml"
    library.write_text(
        'format = "raftweek.entries/1"\n[[crop]]\nkey = "x"\nlike = "no-such"\nname = "X"\n', encoding="utf-8"
    )
    said = run("entries", yard, "--take", library, "--adopt", tmp_path / "out.toml")
    assert said.code == 1
    assert 'like is "no-such"' in said.err
    assert not (tmp_path / "out.toml").exists()


def test_that_halves_of_a_wish_are_wrong_usage(run, yard, tmp_path):
    assert run("entries", yard, "--take", yard).code == 2
    assert run("entries", yard, "--write", yard).code == 2
    assert run("entries", yard, "--write", tmp_path / "out.txt").code == 2
