"""Geometry without Qt, and one painter for screen, print and PDF."""
