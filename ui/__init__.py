"""The faces of the product: the window and the command line. The one place Qt is imported."""
