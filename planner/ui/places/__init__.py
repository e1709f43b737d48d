"""Place book: places, their water, and changing them."""
