"""The gate before all else: points that cannot belong to the survey are put aside, named and kept in the file."""
