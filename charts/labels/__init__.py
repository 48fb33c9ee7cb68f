"""Size labels: by letters, by numbers, their order and their slips."""
