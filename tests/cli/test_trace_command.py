"""Following a batch from the command line."""

import json


def test_that_a_batch_is_followed_as_text_as_data_and_as_a_page(run, tmp_path, kitchen):
    said = run("trace", kitchen, "LTL-27W01-A")
    assert said.code == 0
    assert "seed lot: not noted" in said.out
    assert "harvest expected:" in said.out
    data = json.loads(run("trace", kitchen, "LTL-27W01-A", "--json").out)
    assert data["format"] == "raftweek.trace/1"
    said = run("trace", kitchen, "LTL-27W01-A", "--pdf", tmp_path / "t.pdf")
    assert "t.pdf: 1 page" in said.out


def test_that_an_unknown_code_gets_a_hint(run, kitchen):
    said = run("trace", kitchen, "LTL-27W1-A")
    assert said.code == 2
    assert "Did you mean" in said.err
