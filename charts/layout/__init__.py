"""From a sheet of raw cells to tables: edges, orientation, headings, labels, bands, notes.

``find.find_tables`` is the door. Everything behind it looks at a table through a ``View``, which
may be turned, so that sizes stand down the rows for whoever reads on.
"""
