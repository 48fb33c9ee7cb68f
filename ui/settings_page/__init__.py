"""The shop's own figures on a page of their own, each changed in place."""
