"""The parts of the grammar of one cell. ``charts.notation`` is its door."""
