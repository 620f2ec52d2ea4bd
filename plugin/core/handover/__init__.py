"""Hand-over: files for others."""
