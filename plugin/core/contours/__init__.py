"""Contours: lines of equal height, exact on the triangles."""
