using Microsoft.Data.Sqlite;

namespace Closeout.Bench.Kiosk;

/// <summary>A table of lines in SQLite, each insert a transaction of its own that is on disk when it returns.</summary>
internal sealed class SafeSqlite : IDisposable
{
    private readonly SqliteConnection connection;
    private readonly SqliteCommand insert;
    private readonly SqliteParameter line;

    /// <param name="journal">WAL or DELETE.</param>
    /// <param name="synchronous">FULL flushes at each commit; EXTRA also the folder after the journal is deleted.</param>
    public SafeSqlite(string path, string journal, string synchronous)
    {
        connection = new SqliteConnection($"Data Source={path}");
        connection.Open();
        Run($"PRAGMA journal_mode={journal}");
        Run($"PRAGMA synchronous={synchronous}");
        Run("CREATE TABLE entries (n INTEGER PRIMARY KEY, line BLOB NOT NULL)");
        insert = connection.CreateCommand();
        insert.CommandText = "INSERT INTO entries (line) VALUES ($line)";
        line = insert.Parameters.Add("$line", SqliteType.Blob);
    }

    public void Append(byte[] bytes)
    {
        line.Value = bytes;
        insert.ExecuteNonQuery();
    }

    public void Dispose()
    {
        insert.Dispose();
        connection.Dispose();
        SqliteConnection.ClearAllPools();
    }

    private void Run(string text)
    {
        using var command = connection.CreateCommand();
        command.CommandText = text;
        command.ExecuteNonQuery();
    }
}
