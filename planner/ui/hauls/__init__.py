"""Log hauls: trips and their hauls, tables in and out, and looking back."""
