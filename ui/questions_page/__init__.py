"""The questions page: a source as it came, how it was understood, and what a person must say."""
