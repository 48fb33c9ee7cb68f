"""Text without cells, line by line: every way in which a captured table is told by its lines."""
