"""Why a figure of the side panel is what it is: answers in words, and the dialog that walks through them."""
