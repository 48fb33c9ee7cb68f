"""The form about a model: what its chart does not say. The file beside the charts is its export."""
