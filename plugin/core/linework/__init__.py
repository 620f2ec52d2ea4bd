"""Linework: breaklines, boundaries and voids, from field codes or from drawn lines."""
