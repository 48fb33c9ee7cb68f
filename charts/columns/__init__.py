"""The columns of a table: what each measures, in which unit, whose measure, and its values."""
