"""Trust: what auto-recorded points get wrong, found, shown and counted."""
