"""Riders against charts: margins, verdicts, reasons. No window."""
