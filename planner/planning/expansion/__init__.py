"""Can this loop carry more beds? Four verdicts, each with its limit and its numbers."""
