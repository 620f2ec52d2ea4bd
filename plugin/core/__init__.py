"""Hummock's computing core: from auto-recorded survey points to a surface and its products.

Never imports ``qgis``; needs only the standard library, numpy, scipy, matplotlib and pyproj.
Lengths are metres unless a name ends in its unit.
"""
