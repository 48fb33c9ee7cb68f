"""A typed chart as files, and the picture it was typed from with the place of each value."""
