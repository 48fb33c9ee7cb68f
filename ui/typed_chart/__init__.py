"""A chart typed in from a picture: a grid beside it, checked by the grammar that reads files."""
