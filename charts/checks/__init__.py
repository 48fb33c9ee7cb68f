"""Checks of a whole chart: plain functions from a chart to what they doubt."""
