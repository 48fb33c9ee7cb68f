"""The program's own small controls: they take their colours from the palette and fonts alone."""
