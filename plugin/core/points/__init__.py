"""Points: what the rover recorded, read into columns with every line accounted for."""
