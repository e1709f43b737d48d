"""The jobs of the command line; each module adds its job to the parser and answers it."""
