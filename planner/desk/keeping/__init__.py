"""What the desk does about copies of a farm: backups to go back to, and copies that went their own way."""
