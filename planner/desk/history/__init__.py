"""The list of acts, newest first, and going back or forth to one of them."""
