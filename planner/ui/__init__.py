"""The window: five places of work over one place, one log and one outlook."""
