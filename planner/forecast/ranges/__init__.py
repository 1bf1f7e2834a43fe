"""Low, likely and high of the forecast by the ranges of the figures it goes by, and which matter most."""
