"""Headings: cut into phrases, looked up in the vocabulary, given a meaning."""
