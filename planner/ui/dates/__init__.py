"""Choose dates: the strip's neighbours, ranked plans, the chosen one, and past trips like it."""
