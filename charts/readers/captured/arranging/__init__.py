"""Text that lost its cells: every way to arrange them, and what speaks for each way."""
