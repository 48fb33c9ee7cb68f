"""The wall sheet: pages computed as numbers, painted by one painter for PDF, print and web page."""
