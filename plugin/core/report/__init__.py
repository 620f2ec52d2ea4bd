"""The report: figures and tables from result objects only."""
