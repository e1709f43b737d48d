"""The user's guide inside the program."""
