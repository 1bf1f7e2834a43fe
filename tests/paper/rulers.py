"""A typeface that can be measured without any toolkit: every letter is half as wide as high."""

from planner.paper.measure import Face


class PlainMetrics:
    """Bold letters are a tenth wider; a line is as high as its type."""

    def shows(self, letter: str) -> bool:
        """All letters can be drawn."""
        return True

    def width_em(self, text: str, face: Face) -> float:
        return len(text) * (0.55 if face in (Face.BOLD, Face.NARROW_BOLD) else 0.5)

    def ascent_em(self, face: Face) -> float:
        return 0.8

    def descent_em(self, face: Face) -> float:
        return 0.2
