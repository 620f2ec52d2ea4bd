"""The surface: an exact constrained triangulation of points and lines."""
