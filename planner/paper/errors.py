"""What can go wrong between a report and its paper. Knows no toolkit, so that anyone may catch it."""


class PaperError(Exception):
    """A sheet could not be written; the message says where and why, in words for the user."""


class GivenUpError(Exception):
    """The making of a sheet was broken off because it is wanted no longer; nothing went wrong."""
