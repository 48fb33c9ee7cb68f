"""Sources to sheets. One file per kind of source; a source is claimed by its content."""
