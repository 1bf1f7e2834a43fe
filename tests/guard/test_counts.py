"""Numbers of things that the first page tells are those that there are."""

from planner.paper.registry import DOCUMENTS

WORDS = {17: "Seventeen", 18: "Eighteen", 19: "Nineteen", 20: "Twenty", 21: "Twenty-one", 22: "Twenty-two"}


def test_that_documents_are_counted_right(root):
    assert f"{WORDS[len(DOCUMENTS)]} documents" in (root / "README.md").read_text(encoding="utf-8")
