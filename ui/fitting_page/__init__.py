"""The page the fitter works on: one rider's readings and every model's fit."""
