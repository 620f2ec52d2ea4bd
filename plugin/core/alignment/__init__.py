"""Lines with stations on a surface: profile, cross-sections, grades and their checks against limits."""
