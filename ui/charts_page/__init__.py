"""The charts page: every file that came in, what was read of it, and what is open."""
