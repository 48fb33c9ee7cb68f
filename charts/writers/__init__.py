"""One schema back to paper: workbook and delimited text."""
