"""Rows of single blanks whose pieces and headings are shared out over the same columns."""
