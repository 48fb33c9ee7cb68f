"""A supplier's habits: what a person confirmed, kept as text and applied to the next file."""
