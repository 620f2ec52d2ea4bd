"""Earthwork: how much earth moves between two surfaces, and designs that say where."""
