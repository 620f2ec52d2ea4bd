"""Where water runs on the surface: paths, ponds, catchments."""
