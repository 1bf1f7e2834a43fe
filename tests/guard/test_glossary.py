"""The glossary holds one line for each measured quantity, so that a quantity has one name."""

import ast
import re
import tomllib

import pytest

UNIT = re.compile(
    r"_(m2|m3|g|kg|mg|l|c|d|m|mm|cm|days|share|percent|deg|us_per_cm"
    r"|per_(kg|l|m2|m3|day|week|hour|min|plant|m2_d|kg_h|c))$"
)
ROW = re.compile(r"^\| (?P<term>[^|]+) \| (?P<names>[^|]+) \| (?P<unit>[^|]+) \| (?P<meaning>[^|]+) \|$")


@pytest.fixture(scope="module")
def rows(request):
    text = (request.config.rootpath / "docs" / "glossary.md").read_text(encoding="utf-8")
    found = [match.groupdict() for line in text.splitlines() if (match := ROW.match(line))]
    return [row for row in found if row["term"] not in {"term"}]


@pytest.fixture(scope="module")
def names(rows):
    return [name for row in rows for name in re.findall(r"`([^`]+)`", row["names"])]


def measured_fields(root):
    for path in sorted((root / "planner" / "farm").glob("*.py")):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.ClassDef):
                yield from (
                    line.target.id
                    for line in node.body
                    if isinstance(line, ast.AnnAssign)
                    and isinstance(line.target, ast.Name)
                    and UNIT.search(line.target.id)
                )


def test_that_every_line_gives_a_unit_and_a_meaning(rows):
    assert len(rows) > 50
    assert [row for row in rows if not row["unit"].strip() or not row["meaning"].strip()] == []


def test_that_a_quantity_has_one_line_only(names):
    lower = [name for name in names if name.islower()]
    assert sorted({name for name in lower if lower.count(name) > 1}) == []


def test_that_every_measured_quantity_of_a_farm_is_explained(names, root):
    fields = set(measured_fields(root))
    assert fields - set(names) == set(), "write a line for it in docs/glossary.md"


def test_that_the_words_of_the_window_and_of_the_page_are_one_table(root):
    page = (root / "docs" / "glossary.md").read_text(encoding="utf-8")
    section = page.partition("## Words on the screen")[2].partition("\n## ")[0]
    shown = re.findall(r"^\| ([^|]+) \| ([^|]+) \|$", section, re.MULTILINE)[1:]
    read = tomllib.loads((root / "resources" / "help" / "terms.toml").read_text(encoding="utf-8"))
    assert shown == [(word["heading"], word["paragraphs"][0]) for word in read["words"]]
