"""Features: lines of the ground that the walk itself shows, found without any code."""
