using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Rodwright.Store.Sqlite.Migrations;

internal sealed partial class Tables : Migration
{
    protected override void Up(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.CreateTable(
            name: "jobs",
            columns: table => new
            {
                id = table.Column<Guid>(type: "TEXT", nullable: false),
                title = table.Column<string>(type: "TEXT", nullable: false),
                summary = table.Column<string>(type: "TEXT", nullable: false),
                revision = table.Column<int>(type: "INTEGER", nullable: false),
                changed_by = table.Column<string>(type: "TEXT", nullable: false),
                changed_utc = table.Column<DateTime>(type: "TEXT", nullable: false),
                archived = table.Column<bool>(type: "INTEGER", nullable: false)
            },
            constraints: table =>
            {
                table.PrimaryKey("jobs_key", x => x.id);
            });

        migrationBuilder.CreateTable(
            name: "revisions",
            columns: table => new
            {
                job = table.Column<Guid>(type: "TEXT", nullable: false),
                number = table.Column<int>(type: "INTEGER", nullable: false),
                kind = table.Column<int>(type: "INTEGER", nullable: false),
                words = table.Column<string>(type: "TEXT", nullable: false),
                name = table.Column<string>(type: "TEXT", nullable: false),
                made_by = table.Column<string>(type: "TEXT", nullable: false),
                made_utc = table.Column<DateTime>(type: "TEXT", nullable: false),
                ticket = table.Column<Guid>(type: "TEXT", nullable: false),
                text = table.Column<string>(type: "TEXT", nullable: false)
            },
            constraints: table =>
            {
                table.PrimaryKey("revisions_key", x => new { x.job, x.number });
                table.ForeignKey(
                    name: "revisions_of_job",
                    column: x => x.job,
                    principalTable: "jobs",
                    principalColumn: "id",
                    onDelete: ReferentialAction.Restrict);
            });

        migrationBuilder.CreateIndex(
            name: "jobs_by_change",
            table: "jobs",
            columns: new[] { "archived", "changed_utc", "id" });
    }

    protected override void Down(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.DropTable(
            name: "revisions");

        migrationBuilder.DropTable(
            name: "jobs");
    }
}
