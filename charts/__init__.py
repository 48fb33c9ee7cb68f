"""Paper to one schema, and one schema to paper. No riders, no window."""
