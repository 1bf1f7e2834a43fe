"""Why a figure of the forecast is what it is: formula, inputs with their sources, and what lies behind them.

Gives codes and numbers only; words are made from them elsewhere.
"""
