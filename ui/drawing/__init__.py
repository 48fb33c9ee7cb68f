"""Pictures: geometry computed as numbers, painted by one function for screen, print and PDF."""
